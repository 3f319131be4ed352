"""Documents of rows and cells: .csv and .xlsx read into text cells, whatever the delimiter, encoding and gaps."""
