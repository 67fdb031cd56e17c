"""Places for speakers: doors with glass that comes down behind, shelves, rings, brackets with tabs, and gaskets."""
