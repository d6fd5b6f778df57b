"""What it costs, what to ask, what to buy, and what a label must say: plain functions on floats."""
