"""What is usual: shares and gauges of a person's own batches, drawn towards published levels by stated priors."""
