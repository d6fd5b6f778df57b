"""The cast: powder and water for a cavity."""
