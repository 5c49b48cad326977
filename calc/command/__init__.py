"""The command line, made from the declarations."""
