"""What a person sees: facts and words laid out for a terminal, a page, a sheet of paper."""
