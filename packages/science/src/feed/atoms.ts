/**
 * Atomic masses [g/mol], abridged standard values. Not copied from a page: an opened copy of an older table prints P as 40.97.
 *
 * @source IUPAC2013
 */
export const atomicMass_g_mol = {
  H: 1.008,
  B: 10.81,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  Na: 22.99,
  Mg: 24.305,
  P: 30.974,
  S: 32.06,
  Cl: 35.45,
  K: 39.098,
  Ca: 40.078,
  Mn: 54.938,
  Fe: 55.845,
  Cu: 63.546,
  Zn: 65.38,
  Mo: 95.95,
} as const;
export type Atom = keyof typeof atomicMass_g_mol;

const isAtom = (symbol: string): symbol is Atom => symbol in atomicMass_g_mol;

/** Atoms of one unit of a formula such as `5Ca(NO3)2.NH4NO3.10H2O`. */
function atomsOf(formula: string): Map<Atom, number> {
  const atoms = new Map<Atom, number>();
  const add = (part: Map<Atom, number>, times_n: number) => {
    for (const [atom, count_n] of part) atoms.set(atom, (atoms.get(atom) ?? 0) + count_n * times_n);
  };
  for (const part of formula.split(/[.·]/)) {
    const [, times = "", rest = ""] = /^(\d*)(.*)$/.exec(part.trim()) ?? [];
    add(groupOf(rest, formula), times === "" ? 1 : Number(times));
  }
  return atoms;
}

function groupOf(text: string, formula: string): Map<Atom, number> {
  const atoms = new Map<Atom, number>();
  const add = (atom: Atom, count_n: number) => atoms.set(atom, (atoms.get(atom) ?? 0) + count_n);
  let rest = text;
  while (rest !== "") {
    const group = /^\(([^()]+)\)(\d*)/.exec(rest);
    const single = /^([A-Z][a-z]?)(\d*)/.exec(rest);
    const times_n = Number((group ?? single)?.[2] || "1");
    if (group) for (const [atom, count_n] of groupOf(group[1] ?? "", formula)) add(atom, count_n * times_n);
    else if (single && isAtom(single[1] ?? "")) add(single[1] as Atom, times_n);
    else throw new RangeError(`formula is ${formula}; expected symbols of known elements, as KNO3`);
    rest = rest.slice((group ?? single)?.[0].length ?? rest.length);
  }
  if (atoms.size === 0) throw new RangeError(`formula is ${formula}; expected symbols, as KNO3`);
  return atoms;
}

/**
 * Molar mass of a formula, waters of crystallisation after a point.
 *
 * @param formula such as `KNO3` or `5Ca(NO3)2.NH4NO3.10H2O`
 * @returns mass of one mole [g/mol]
 * @throws RangeError for a symbol that is no element known here
 * @source IUPAC2013
 * @example molarMass_g_mol("KNO3") // 101.102
 */
export function molarMass_g_mol(formula: string): number {
  let mass_g_mol = 0;
  for (const [atom, count_n] of atomsOf(formula)) mass_g_mol += atomicMass_g_mol[atom] * count_n;
  return mass_g_mol;
}

/**
 * Share by mass of an element in a formula: turns oxides, ions and salts into elements.
 *
 * @param formula what is given, such as `P2O5`, `NO3` or `MgSO4.7H2O`
 * @param atom element asked for; 0 where the formula holds none
 * @returns share of the mass, 0 to 1
 * @throws RangeError for a symbol that is no element known here
 * @source IUPAC2013
 * @example elementShare_frac({ formula: "P2O5", atom: "P" }) // 0.43643
 * @example elementShare_frac({ formula: "K2O", atom: "K" }) // 0.83015
 */
export function elementShare_frac({
  formula,
  atom,
}: {
  readonly formula: string;
  readonly atom: Atom;
}): number {
  return ((atomsOf(formula).get(atom) ?? 0) * atomicMass_g_mol[atom]) / molarMass_g_mol(formula);
}
