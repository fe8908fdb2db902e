import type { PlantId } from "@sillwood/bench/book";

/** One invented pot of a big book: enough of a dry-down that its waterings and weights make sense together. */
export interface BigPot {
  readonly plant: PlantId;
  readonly bench: number;
  readonly spot: string;
  readonly top_cm: number;
  readonly medium: "spongy" | "bark" | "gritty";
  readonly habit: "thin" | "fat" | "lantern" | "tiny";
  readonly capacity_g: number;
  readonly drained_g: number;
  readonly use_g_d: number;
  /** Share of the store used when its people find it dry. */
  readonly wateredAt_frac: number;
  depletion_g: number;
}

const MEDIA = ["spongy", "bark", "gritty"] as const;
const HABITS = ["thin", "fat", "lantern", "tiny"] as const;
/** Water that a medium gives, share of its volume. */
const GIVES_frac = { spongy: 0.42, bark: 0.32, gritty: 0.22 } as const;
const DEPTH_PER_WIDTH = 0.75;

export const depthOf_cm = (top_cm: number): number => Math.round(top_cm * DEPTH_PER_WIDTH);

/** A pot as it stands just drained; dries through in about three to eight days. */
export function bigPot(plant: PlantId, bench: number, spot: string, random: () => number): BigPot {
  const top_cm = 8 + Math.floor(random() * 9);
  const medium = MEDIA[Math.floor(random() * MEDIA.length)] as BigPot["medium"];
  const volume_mL = 0.6 * top_cm * top_cm * depthOf_cm(top_cm);
  const capacity_g = volume_mL * GIVES_frac[medium] * (0.8 + 0.4 * random());
  return {
    plant,
    bench,
    spot,
    top_cm,
    medium,
    habit: HABITS[Math.floor(random() * HABITS.length)] as BigPot["habit"],
    capacity_g,
    drained_g: volume_mL * (0.8 + 0.4 * random()),
    use_g_d: capacity_g / (4 + 6 * random()),
    wateredAt_frac: 0.4 + 0.25 * random(),
    depletion_g: 0,
  };
}

/** Lets a day pass; use falls as the pot dries, and differs from day to day. */
export function passDay(pot: BigPot, random: () => number): void {
  const dry_frac = pot.depletion_g / pot.capacity_g;
  const stress = dry_frac > 0.65 ? Math.max(0, (1 - dry_frac) / 0.35) : 1;
  pot.depletion_g = Math.min(pot.capacity_g, pot.depletion_g + pot.use_g_d * stress * (0.7 + 0.6 * random()));
}
