// Loaded before the bundler, which reads this as it is loaded: what it needed for ten thousand texts, a gigabyte, is given
// back when it is through, not held while the pages are made.
process.env.MIMALLOC_PURGE_DELAY ??= '0';
