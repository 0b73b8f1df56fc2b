"""Small plans and shops that tests of many rooms share."""
