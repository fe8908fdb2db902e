/** What is worked out when somebody asks for it, and then kept: words and sums of a thousand plants of which a few are looked at. */
export function once<Value>(work: () => Value): () => Value {
  let made: { readonly value: Value } | undefined;
  return () => {
    made ??= { value: work() };
    return made.value;
  };
}
