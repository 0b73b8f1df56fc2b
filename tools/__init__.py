"""What sets the project up and keeps it in order; none of it is part of the product."""
