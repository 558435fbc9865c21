"""Reading what a person kept: batch sheets, egg sheets, weights, sensor logs -> plain tables."""
