"""The page's code and the browser's Python, in Node."""
