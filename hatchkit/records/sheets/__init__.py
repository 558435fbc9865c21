"""A keeper's sheet, of any shape, read by its words, its values and its arithmetic together.

``lexicon`` (what a word may say) -> ``meanings`` (what a heading may mean; ``fields``, ``own_columns``) -> ``shape``
with ``block``, ``forms``, ``rows`` (where the tables are, which way round, which rows are data), ``expand`` (counts
told in words become columns) -> ``cells`` and ``profile`` (what the cells hold) -> ``candidates``, ``assign`` with
``ledger``
(the reading of all columns under which the eggs add up best, and how much better it is than the next) -> ``tables``,
``eggsheet``, ``logsheet``, ``diary``, ``weighings`` (one block -> ``parts``) -> ``assemble`` (one season; ``species``,
``names``, ``looks``, ``frames``) -> ``shown`` (the reading, the ledger, and what stays open).
"""
