"""The whole book of vessels: as one file, as a table, read back and compared, searched for a lot."""
