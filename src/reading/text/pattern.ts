/** A pattern that is made when it is first asked for: one of all alphabets takes a hundredth of a start. */
export function pattern(make: () => RegExp): () => RegExp {
  let made: RegExp | null = null;
  return () => {
    made ??= make();
    return made;
  };
}
