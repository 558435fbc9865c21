"""A keeper's sheet, of any shape, read by its words, its values and its arithmetic together.

``lexicon`` (what a word may say) -> ``meanings`` (what a heading may mean) -> ``shape`` (where the tables are, which
way round) -> ``cells`` and ``profile`` (what the cells hold) -> ``assign`` with ``ledger`` (the reading of all columns
under which the eggs add up best, and how much better it is than the next) -> ``assemble`` (plain tables) ->
``questions`` (what stays open, the most consequential first).
"""
