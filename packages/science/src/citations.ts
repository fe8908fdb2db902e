/** A work that a formula or a number comes from. `seen` says how much of it was before our eyes. */
export type Citation = {
  readonly authors: string;
  readonly year: number;
  readonly title: string;
  readonly place: string;
  readonly seen: "opened" | "abstract" | "quoted by an opened document" | "from memory";
};

const work = (
  authors: string,
  year: number,
  title: string,
  place: string,
  seen: Citation["seen"],
): Citation => ({ authors, year, title, place, seen });

/** Works cited in more than one field; each field's `sources.ts` picks the ones it uses. */
export const citations = {
  FAO56: work(
    "Allen RG, Pereira LS, Raes D, Smith M",
    1998,
    "Crop evapotranspiration: guidelines for computing crop water requirements",
    "FAO Irrigation and Drainage Paper 56",
    "quoted by an opened document",
  ),
  ASCE2005: work(
    "Allen RG, Walter IA, Elliott RL, Howell TA, Itenfisu D, Jensen ME, Snyder RL (eds)",
    2005,
    "The ASCE standardized reference evapotranspiration equation",
    "American Society of Civil Engineers",
    "quoted by an opened document",
  ),
  NISTSP811: work(
    "Thompson A, Taylor BN",
    2008,
    "Guide for the use of the International System of Units (SI)",
    "NIST Special Publication 811",
    "from memory",
  ),
  CampbellNorman1998: work(
    "Campbell GS, Norman JM",
    1998,
    "An introduction to environmental biophysics, 2nd edition",
    "Springer, Table 7.6 and chapter 14",
    "from memory",
  ),
} as const;
