// Compiled once for each folder of core: its command line is what that folder's users see.
