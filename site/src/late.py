"""Modules handed over as they are needed, compiled: no file and no zip is opened for them.

Lives in the browser's Python only. What was taken is found under the path entry "kept:", and under "kept:calc/sums" and
the like for what is inside a package; the texts that lie beside the modules are found by importlib.resources.
"""

import marshal
import sys
from importlib.util import spec_from_loader

SCHEME = "kept:"
kept = {}
listed = set()


def take(bundle):
    """Take a bundle: a marshalled dictionary of code and texts by file name, as {"calc/sums/slope.py": code}."""
    kept.update(marshal.loads(bundle))


def name(files):
    """Say which modules there are, taken or to come, for those who list a package: ["calc/sums/slope.py", ...]."""
    listed.update(files)


class Place:
    """A folder of what was taken, as sys.path_hooks wants it."""

    def __init__(self, path):
        if not path.startswith(SCHEME):
            raise ImportError(path)
        self.folder = path.removeprefix(SCHEME)

    def find_spec(self, fullname, target=None):
        """Where a module's code is, when it was taken."""
        stem = fullname.replace(".", "/")
        for file in (f"{stem}.py", f"{stem}/__init__.py"):
            if file in kept:
                return _spec(fullname, stem, file)
        return None

    def iter_modules(self, prefix=""):
        """For pkgutil: the modules in this folder and whether each is a package."""
        inside = [file.removeprefix(self.folder + "/") for file in sorted(listed) if file.startswith(self.folder + "/")]
        return [(prefix + file.removesuffix(".py"), False) for file in inside if "/" not in file]


def _spec(fullname, stem, file):
    package = file.endswith("/__init__.py")
    spec = spec_from_loader(fullname, Loader(), origin=SCHEME + file, is_package=package)
    if package:
        spec.submodule_search_locations = [SCHEME + stem]
    return spec


class Loader:
    """Runs the code that was taken."""

    def create_module(self, spec):
        """An ordinary module."""
        return None

    def exec_module(self, module):
        """Run the module's code, which is then let go of."""
        exec(kept.pop(module.__spec__.origin.removeprefix(SCHEME)), module.__dict__)

    def get_resource_reader(self, fullname):
        """The texts beside a package's modules."""
        return Texts(fullname.replace(".", "/"))


class Texts:
    """Texts by name, as importlib.resources wants them."""

    def __init__(self, path):
        self.path = path

    def files(self):
        """The folder itself."""
        return self

    def joinpath(self, name):
        """One text."""
        return Texts(f"{self.path}/{name}")

    def read_text(self, encoding=None):
        """What it says."""
        if self.path not in kept:
            raise FileNotFoundError(self.path)
        return kept[self.path]


sys.path_hooks.insert(0, Place)
sys.path.append(SCHEME)
