"""The bench: a stock start of Python in the page against ours, side by side in one run.

    whole.py       the order of a run, and what it prints
    sites.py       the two sites: ours from dist/, and stock Pyodide under the same page
    server.py      serves both, in a process of its own; bench.html and bench.js drive the page
    engines.py     which browser engines there are, and how each is started
    processes.py   starting, weighing and ending a browser
    sessions.py    one browser through a list of steps
    starts.py      the three conditions: cold, warm, offline
    reading.py     reading a model's file, in the page and by outside libraries
    book.py        a book of many vessels: list, search, save, read, find; bench_book.js does it in the page
    wire.py        bytes of a first visit
    numbers.py     medians and percentiles
    report.py      the object for --json, and the Markdown table
"""
