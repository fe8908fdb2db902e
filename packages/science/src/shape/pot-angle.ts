import { within } from "../errors/index.ts";
import { crownPicture, type Outline, overlap_frac } from "./outline.ts";
import { plantTree, type StemNode, type Tree } from "./tree.ts";
import { along, minus, type Triple } from "./vector.ts";

const SEARCH_CELLS_n = 48;

/** A plant tipped about its foot: to the right by roll, away from the viewer by pitch. @source our assumption */
function tipped(tree: Tree, pitch_rad: number, roll_rad: number): Tree {
  const foot = (tree.nodes[0] as StemNode).position_mm;
  const turn = (place: Triple): Triple => {
    const [x, y, z] = minus(place, foot);
    const x1 = x * Math.cos(roll_rad) + z * Math.sin(roll_rad);
    const z1 = z * Math.cos(roll_rad) - x * Math.sin(roll_rad);
    return along(
      foot,
      [
        x1,
        y * Math.cos(pitch_rad) + z1 * Math.sin(pitch_rad),
        z1 * Math.cos(pitch_rad) - y * Math.sin(pitch_rad),
      ],
      1,
    );
  };
  return plantTree(tree.nodes.map((node) => ({ ...node, position_mm: turn(node.position_mm) })));
}

/**
 * The angles at which to pot a plant so that its crown fits an outline best.
 *
 * All pitches and rolls in steps of 5°, the crown tipped about its foot
 *
 * @param most_deg how far it may be tipped, 0 to 45
 * @returns best tip away and to the right [°], its overlap with the outline and that of the plant upright
 * @throws QuantityError outside that range
 * @source our assumption; potting at an angle is common practice
 */
export function bestPotAngle(
  tree: Tree,
  outline: Outline,
  most_deg: number,
): {
  readonly pitch_deg: number;
  readonly roll_deg: number;
  readonly overlap_frac: number;
  readonly upright_frac: number;
} {
  within("most_deg", most_deg, 0, 45);
  const overlap = (pitch_deg: number, roll_deg: number): number => {
    const picture = crownPicture(
      tipped(tree, (pitch_deg * Math.PI) / 180, (roll_deg * Math.PI) / 180),
      outline,
      SEARCH_CELLS_n,
    );
    const covered = new Uint8Array(picture.cells_n);
    for (const cells of picture.covers) for (const cell of cells) covered[cell] = 1;
    return overlap_frac(picture, covered);
  };
  const upright_frac = overlap(0, 0);
  let best = { pitch_deg: 0, roll_deg: 0, overlap_frac: upright_frac };
  const steps = Math.floor(most_deg / 5);
  for (let pitch = -steps; pitch <= steps; pitch += 1)
    for (let roll = -steps; roll <= steps; roll += 1) {
      const found = overlap(pitch * 5, roll * 5);
      if (found > best.overlap_frac + 1e-9)
        best = { pitch_deg: pitch * 5, roll_deg: roll * 5, overlap_frac: found };
    }
  return { ...best, upright_frac };
}
