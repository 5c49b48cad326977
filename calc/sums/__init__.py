"""One file a sum, nothing else."""
