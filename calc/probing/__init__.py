"""Why a number is what it is, how true it is, and what would make it another: for sums and pieces alike."""
