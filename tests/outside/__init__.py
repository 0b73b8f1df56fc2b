"""Every number that the product computes, against something that nobody here wrote."""
