const AMOUNT = /^(.*\d[\d.,½¼¾⅛⅜⅝⅞]*)([\s\u2009\u202f]+)(\D+)$/u;

/** A number with its unit at 60 % on the same baseline; anything else as it is. */
export function Amount({ said }: { readonly said: string }) {
  const parts = AMOUNT.exec(said);
  if (!parts) return <>{said}</>;
  return (
    <>
      {parts[1]}
      <span style={{ fontSize: "0.6em" }}>
        {parts[2]}
        {parts[3]}
      </span>
    </>
  );
}
