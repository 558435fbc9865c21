"""What the eggs felt: humid air, egg temperature, excursions, water loss, the development clock."""
