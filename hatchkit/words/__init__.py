"""What is worded alike wherever it is said: stages, shares, counts, tables for the reader, cautions."""
