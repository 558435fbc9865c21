"""Questions and what the records answer: facts for pages and notebooks, never sentences."""
