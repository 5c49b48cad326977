"""A piece while it is being built: its sizes, the maker's entries, what gives way, what is left as a gap."""
