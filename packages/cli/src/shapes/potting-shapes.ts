import type { DayPage, Mix, MixPage, PotPage } from "@sillwood/bench/crafts/potting";
import { iso } from "./instants.ts";

/** The stable shapes of potting (docs/cli.md): the engine's own objects may change under them. */
export const mixShape = (page: MixPage) => ({
  said: page.said,
  pot: page.pot,
  medium_mL: page.medium_mL,
  airWanted_frac: page.airWanted_frac,
  mix: page.mix ? oneMix(page.mix) : null,
  others: page.others.map(oneMix),
  noMix: page.noMix ?? null,
  test: page.test,
});

const oneMix = (mix: Mix) => ({
  said: mix.said,
  recipe: mix.recipe.map(({ part, scoops_n }) => ({ part, scoops_n })),
  air_frac: mix.air_frac,
  airLow_frac: mix.airLow_frac,
  airHigh_frac: mix.airHigh_frac,
  chance_frac: mix.chance_frac,
  available_mL: mix.available_mL,
  airless_h: mix.airless_h,
  wetLayer_cm: mix.cut.wetLayer_cm,
  fill_cm: mix.cut.fill_cm,
  scoop_mL: mix.scoop_mL,
  dry_g: mix.dry_g,
});

export const dayShape = (page: DayPage) => ({
  said: page.said,
  warmth: page.warmth
    ? {
        state: page.warmth.state,
        said: page.warmth.said,
        until: page.warmth.until_ms === undefined ? null : iso(page.warmth.until_ms),
      }
    : null,
  rail: page.rail.map(({ plant, number, kind, done, next, clocks, how, drafts }) => ({
    plant,
    number,
    kind,
    done: done.map(({ step, at_ms }) => ({ step, at: iso(at_ms) })),
    next: next ?? null,
    clocks: clocks.map(({ key, until_ms, isPast, said }) => ({
      key,
      until: iso(until_ms),
      past: isPast,
      said,
    })),
    how,
    drafts: drafts.map(({ kind: of, on, data }) => ({ kind: of, on, data })),
  })),
  due: page.due.map(({ plant, number, said }) => ({ plant, number, said })),
  held: page.held.map(({ number, said }) => ({ number, said })),
});

export const potShape = (page: PotPage) => ({
  number: page.number,
  lines: page.lines,
  figures: page.figures,
});
