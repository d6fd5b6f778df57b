"""From readings off the scale to a volume with its ±."""
