"""The candle: wax and fragrance for a well."""
