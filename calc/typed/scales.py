"""Every scale that is measured on beside length and angle, by the kind of entry or answer it belongs to."""

from calc.typed.scale import Scale

SCALES = {
    "mass": Scale(
        "kilogram",
        {
            "kilogram": ("kg", "kgs", "kilo", "kilos", "kilogram", "kilograms"),
            "gram": ("g", "gram", "grams"),
            "pound": ("lb", "lb.", "lbs", "pound", "pounds"),
            "ounce": ("oz", "oz.", "ounce", "ounces"),
        },
        ("kilogram", "gram"),
        ("pound", "ounce"),
    ),
    "force": Scale(
        "newton",
        {
            "newton": ("N", "newton", "newtons"),
            "kilonewton": ("kN",),
            "pound_force": ("lbf", "lb", "lbs", "pounds"),
            "kilogram_force": ("kgf", "kg"),
        },
        ("kilonewton", "newton"),
        ("pound_force",),
    ),
    "pressure": Scale(
        "megapascal",
        {
            "gigapascal": ("GPa",),
            "kilopascal": ("kPa",),
            "megapascal": ("MPa", "N/mm2"),
            "million_psi": ("million psi", "Mpsi"),
            "psi": ("psi", "lb/in2"),
        },
        ("gigapascal", "kilopascal"),
        ("million_psi", "psi"),
    ),
    "area": Scale(
        "millimetre ** 2",
        {"square_metre": ("m²",), "square_foot": ("ft²",)},
        ("square_metre",),
        ("square_foot",),
    ),
    "liquid": Scale(
        "millimetre ** 3",
        {
            "litre": ("l", "litre", "litres"),
            "millilitre": ("ml",),
            "us_fluid_ounce": ("US fl oz",),
            "us_pint": ("US pint", "US pints"),
            "us_quart": ("US quart", "US quarts"),
            "us_gallon": ("US gal", "US gallon", "US gallons"),
        },
        ("litre", "millilitre"),
        ("us_fluid_ounce",),
    ),
    "capacity": Scale(
        "millimetre ** 3",
        {"litre": ("l", "litre", "litres"), "millilitre": ("ml",), "cubic_inch": ("in³", "cubic inches", "cu in")},
        ("litre", "millilitre"),
        ("cubic_inch",),
    ),
    "density": Scale(
        "kilogram_a_cubic_metre",
        {"kilogram_a_cubic_metre": ("kg/m³",), "pound_a_cubic_foot": ("lb/ft³",)},
        ("kilogram_a_cubic_metre",),
        ("pound_a_cubic_foot",),
    ),
    "spread": Scale(
        "gram_a_square_metre",
        {
            "gram_a_square_metre": ("g/m²", "gsm"),
            "pound_a_thousand_square_feet": ("lb/1000 ft²", "lb/1000ft²"),
        },
        ("gram_a_square_metre",),
        ("pound_a_thousand_square_feet",),
    ),
    "coverage": Scale(
        "square_metre_a_litre",
        {
            "square_metre_a_litre": ("m²/l", "m²/litre"),
            "square_foot_a_us_gallon": ("ft²/US gal", "ft²/gal", "ft²/US gallon", "ft²/gallon"),
        },
        ("square_metre_a_litre",),
        ("square_foot_a_us_gallon",),
    ),
}
