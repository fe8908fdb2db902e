import { zoneOf } from "../../device/settings.ts";
import { nowMs } from "../../engine/clock.ts";
import { useSettings } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import { Choices } from "../fields/choices.tsx";
import fields from "../fields/fields.module.css";
import { TextField } from "../fields/text-field.tsx";
import { instantOf, localDate, localTime, type When } from "./when.ts";

const CHOICES = ["now", "this morning", "yesterday", "other"] as const;

/** When it happened; not sure is answered by the nearest word. */
export function WhenRow({
  when,
  onChange,
}: {
  readonly when: When;
  readonly onChange: (when: When) => void;
}) {
  const { write: words } = useWords();
  const settings = useSettings();
  const zone = zoneOf(settings);
  const wrong = instantOf(when, nowMs(), zone) === null && when.date !== "";
  return (
    <div className={fields["form"]}>
      <Choices
        legend={words.when}
        options={CHOICES.map((value) => ({ value, said: words.whens[value] }))}
        value={when.choice}
        onChoose={(choice) =>
          onChange({
            choice,
            date: when.date || localDate(nowMs(), zone),
            time: when.time || localTime(nowMs(), zone),
          })
        }
      />
      {when.choice === "other" && (
        <>
          <TextField
            label={words.day}
            type="date"
            short
            value={when.date}
            onType={(date) => onChange({ ...when, date })}
            problem={wrong ? <p>{words.ahead}</p> : undefined}
          />
          <TextField
            label={words.time}
            type="time"
            short
            value={when.time}
            onType={(time) => onChange({ ...when, time })}
          />
        </>
      )}
    </div>
  );
}
