"""Words, signs and numbers of a text, and what people mean by them."""
