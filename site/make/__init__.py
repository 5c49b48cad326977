"""What build.py calls: set-up, catalogue, bundles, pages, serving, tests, bench. Standard library only."""
