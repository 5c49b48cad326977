"""What people type, read as exact numbers, or refused in a sentence."""
