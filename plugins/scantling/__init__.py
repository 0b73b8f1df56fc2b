"""scantling: free, printable, resizable plans for home-workshop furniture."""
