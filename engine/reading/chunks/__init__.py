"""The numbers of one exercise, gathered into chunks: what stands around one x, with the marks that belong to it."""
