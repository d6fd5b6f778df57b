"""The steps of the job: what each asks, the figures it gives, and how they are told."""
