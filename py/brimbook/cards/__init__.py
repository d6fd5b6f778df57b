"""The cards of a vessel, one a step: what is asked, what was understood, what the answer is."""
