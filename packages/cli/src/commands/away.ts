import { AbsenceError, awayPage } from "@sillwood/bench/pages";
import { readBook } from "../book/session.ts";
import { instantOf, WHEN_FORMS } from "../book/when.ts";
import type { Command } from "../command.ts";
import { dataError, UsageError } from "../errors.ts";
import { askedShape } from "../shapes/asked-shape.ts";
import { iso } from "../shapes/instants.ts";
import { awayText } from "../text/away-text.ts";
import { widthFor } from "../text/width.ts";

/** An absence, planned: what will not last, what to do about it, a sheet for the sitter. */
export const away: Command = {
  verb: "away",
  what: "plan an absence: what will not last, what helps, a sheet for the sitter",
  usage: ["FROM TO [--sitter]"],
  options: { sitter: { type: "boolean", what: "only the sheet for whoever waters meanwhile" } },
  help: ["Chances are that nothing is done meanwhile. Nothing is written into the book."],
  example: ["sillwood away tomorrow 2026-12-06", 'sillwood away "2026-12-01 8:00" 2026-12-09 --sitter'],
  async run(call) {
    const [from, to, more] = call.words;
    if (from === undefined || to === undefined || more !== undefined)
      throw new UsageError(
        "away from when to when? sillwood away tomorrow 2026-12-06. Put dates with a time in quotes.",
      );
    const reading = await readBook(call);
    const instant = (text: string) => {
      const at_ms = instantOf(text, reading.calendar, reading.now_ms);
      if (at_ms === undefined)
        throw new UsageError(`${JSON.stringify(text.slice(0, 60))} is no date; expected ${WHEN_FORMS}.`);
      return at_ms;
    };
    const absence = { from_ms: instant(from), to_ms: instant(to) };
    const plans = await (async () => {
      try {
        return await awayPage(reading.desk, absence);
      } catch (error) {
        if (error instanceof AbsenceError) throw dataError("to", error.message, to);
        throw error;
      }
    })();
    const { desk } = reading;
    return {
      json: {
        ...askedShape(reading),
        from: iso(absence.from_ms),
        to: iso(absence.to_ms),
        plans: plans.map(({ craft, plan }) => ({
          craft,
          said: plan.said,
          plants: plan.plants.map(({ plant, said, wants_frac, suffers_frac, dates_ms, remedies }) => ({
            plant,
            number: desk.numberOf(plant),
            said,
            wants_frac,
            suffers_frac,
            dates: dates_ms.map(iso),
            remedies: remedies.map(
              ({ key, said: saidOf, sum, wants_frac: wants, suffers_frac: suffers }) => ({
                key,
                said: saidOf,
                sum,
                wants_frac: wants,
                suffers_frac: suffers,
              }),
            ),
          })),
          sitter: plan.sitter.map(({ plant, at_ms, said, amount }) => ({
            plant,
            number: desk.numberOf(plant),
            at: iso(at_ms),
            said,
            amount,
          })),
          back: plan.back.map(({ plant, said }) => ({ plant, number: desk.numberOf(plant), said })),
        })),
      },
      text: plans
        .map(({ plan }) => awayText(plan, desk, widthFor(call), call.options["sitter"] === true))
        .join("\n\n"),
    };
  },
};
