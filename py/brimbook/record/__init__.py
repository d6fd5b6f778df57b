"""A vessel's record: what the maker said, and nothing else."""
