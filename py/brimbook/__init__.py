"""Brimbook's core: a vessel's record goes in, every figure comes out.

Floors, each standing only on those below it:

    reading    files that the maker chooses, read by a second Python
    door       what the page may ask, by name
    settings   how one maker reads figures
    cards      what each step asks, and how its answers are told
    work_out   the order of the job: record to figures
    steps      the figures of each step, and its cautions
    sell       cost, price, packs to buy, net weight on a label
    candle     wax and fragrance
    cast       powder and water
    draw       SVG from figures, and the calendar file
    fill       readings off the scale to a volume with its ±
    mesh       solids as triangles: read from a file, checked, measured, cut
    shape      solids by formula, outlines
    book       all vessels: as a file, as a table, read back and compared, searched for a lot
    record     the vessel's record: fields, checks, link
    figure     a value that shows its working
    sources    where the constants come from
    quantity   what people type, read and shown back
"""

__version__ = "0.1.0"
