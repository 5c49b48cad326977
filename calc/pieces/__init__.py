"""One file a piece, nothing else."""
