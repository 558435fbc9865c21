"""A split trial: eggs of every set dealt by lot to two ways, and judged by the plan that was made before."""
