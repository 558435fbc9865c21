"""Tables in, matplotlib axes out; nothing here computes."""
