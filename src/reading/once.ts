/** What is made when it is first asked for, and kept: large patterns are slow to get ready, and most posts need none of them. */
export function once<T extends object>(make: () => T): () => T {
  let made: T | null = null;
  return () => {
    made ??= make();
    return made;
  };
}
