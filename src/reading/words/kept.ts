/**
 * What is made of a post's tokens and asked for again by the next rule, kept until another's are asked about. One alone
 * is kept: a weak map of many makes the collector carry all of them along.
 */
export function keptLast<K extends object, V>(make: (of: K) => V): (of: K) => V {
  let last: { readonly of: K; readonly made: V } | null = null;
  return (of) => {
    if (last?.of !== of) last = { of, made: make(of) };
    return last.made;
  };
}
