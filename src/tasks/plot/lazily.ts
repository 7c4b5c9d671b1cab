// What is worked out when it is asked for first, and then kept: a list of many things may hold what only those drawn need.

/** The value of `make`, made at most once. */
export function lazily<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
