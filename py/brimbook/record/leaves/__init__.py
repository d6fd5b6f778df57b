"""The leaves of a vessel's record, one file a part of the job."""
