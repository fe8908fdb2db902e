import { useLocation } from "wouter";
import { changeSettings, type Settings } from "../../device/settings.ts";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { Frame } from "../../shell/frame.tsx";
import { sayLast } from "../../shell/last-line.ts";
import { useSettings } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import { Choices } from "../fields/choices.tsx";
import { NumberField } from "../fields/number-field.tsx";
import styles from "../pages.module.css";

const SCALE = { unit: "g", min: 0.1, max: 50 } as const;
const JUG = { unit: "mL", min: 1, max: 1000 } as const;

/** Screen 16: changes act at once, with Undo in the last line. */
export function SettingsScreen() {
  const { settings: words } = useWords();
  const settings = useSettings();
  const [, go] = useLocation();
  const { value: house } = useAsk("house", {});
  const { value: assumed } = useAsk("assumed", {});
  // Prices are the grower's alone.
  const isGrower = useEngine().who()?.role === "grower";
  const set = (change: Partial<Settings>) => {
    const before = changeSettings(change);
    sayLast({
      text: words.changed,
      undo: () => {
        changeSettings(before);
        sayLast(undefined);
      },
    });
  };
  const rows = [
    [
      words.site(house?.site.assumed ?? true),
      house ? words.siteSaid(house.site.name, house.site.latitude_deg, house.site.longitude_deg) : "",
      "/write/site.described/book",
    ],
    [
      words.habits,
      house ? words.habitsSaid(house.habits.minutes, house.habits.weekdays.length) : "",
      "/write/site.habits/book",
    ],
    ...(isGrower
      ? ([
          [
            words.tariff,
            house?.tariff ? words.tariffSaid(house.tariff.said) : words.noTariff,
            "/write/supply.tariff/book",
          ],
        ] as const)
      : []),
    [words.assumed, words.assumedSaid(assumed?.length ?? 0), "/settings/assumed"],
    [words.takeAll, words.takeAllSaid, "/book/take"],
    [words.people, words.peopleSaid, "/settings/people"],
    [words.cautions, words.cautionsSaid, "/settings/cautions"],
  ] as const;
  return (
    <Frame where={words.title}>
      <div className={styles["form"]}>
        <Choices
          legend={words.units}
          options={[
            { value: "metric", said: words.metric },
            { value: "us", said: words.us },
          ]}
          value={settings.units}
          onChoose={(units) => set({ units })}
        />
        <Choices
          legend={words.hands}
          options={[
            { value: "right", said: words.right },
            { value: "left", said: words.left },
          ]}
          value={settings.hand}
          onChoose={(hand) => set({ hand })}
        />
        <Choices
          legend={words.wet}
          options={[
            { value: "dry", said: words.dry },
            { value: "wet", said: words.everyRound },
          ]}
          value={settings.wet ? "wet" : "dry"}
          onChoose={(hands) => set({ wet: hands === "wet" })}
        />
        <Choices
          legend={words.look}
          options={(["device", "paper", "dark", "sun", "night"] as const).map((value) => ({
            value,
            said: words.papers[value],
          }))}
          value={settings.paper}
          onChoose={(paper) => set({ paper })}
        />
        <Choices
          legend={words.language}
          options={[
            { value: "en", said: "English" },
            { value: "de", said: "Deutsch" },
          ]}
          value={settings.language}
          onChoose={(language) => set({ language })}
        />
        <Choices
          legend={words.letterKeys}
          options={[
            { value: "on", said: words.on },
            { value: "off", said: words.off },
          ]}
          value={settings.letterKeys ? "on" : "off"}
          onChoose={(letters) => set({ letterKeys: letters === "on" })}
        />
        <div className={styles["form"]}>
          <NumberField
            label={words.scaleStep}
            range={SCALE}
            value={settings.scaleStep_g}
            onValue={(value) => value && changeSettings({ scaleStep_g: value })}
          />
          <NumberField
            label={words.jugStep}
            range={JUG}
            value={settings.jugStep_mL}
            onValue={(value) => value && changeSettings({ jugStep_mL: value })}
          />
        </div>
      </div>
      <Ledger label={words.more}>
        {rows.map(([name, said, to]) => (
          <Row key={to} onOpen={() => go(to)}>
            <span className={styles["line"]}>
              <strong>{name}</strong>
            </span>
            <span className={styles["beside"]}>{said}</span>
          </Row>
        ))}
      </Ledger>
      <p className={styles["note"]}>{words.version}</p>
    </Frame>
  );
}
