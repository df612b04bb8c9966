// A source that the sample lists.
