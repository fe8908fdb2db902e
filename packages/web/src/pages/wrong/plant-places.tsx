import type { Look } from "@sillwood/bench/crafts";
import { type CSSProperties, useId } from "react";
import { useWords } from "../../words/words.ts";
import styles from "./wrong.module.css";

export type Where = Look["where"];
const PLACES = [
  "whole",
  "tip",
  "leaf",
  "underside",
  "stem and soil",
  "fruit",
] as const satisfies readonly Where[];

interface PlantPlacesProps {
  readonly where: Where;
  readonly onChoose: (where: Where) => void;
}

/** Where on the picture each place's mark stands, in per cent of it. */
const MARKS: Readonly<Record<Where, { readonly x: number; readonly y: number }>> = {
  whole: { x: 50, y: 6 },
  tip: { x: 24, y: 10 },
  leaf: { x: 16, y: 38 },
  underside: { x: 83, y: 30 },
  "stem and soil": { x: 20, y: 76 },
  fruit: { x: 83, y: 60 },
};

/** A drawn plant with six places: one presses where it is seen. No names to know, and the words stand beside for readers. */
export function PlantPlaces({ where, onChoose }: PlantPlacesProps) {
  const { wrong: words } = useWords();
  const name = useId();
  return (
    <fieldset className={styles["places"]}>
      <legend>{words.where}</legend>
      <div className={styles["plant"]}>
        <svg viewBox="0 0 200 200" className={styles["drawing"]} aria-hidden="true">
          <path className={styles["pot"]} d="M66 150 h68 l-9 42 h-50 z" />
          <path className={styles["soil"]} d="M69 156 h62" />
          <path d="M100 155 C98 130 104 118 99 96 C96 82 100 66 98 44" className={styles["stem"]} />
          <path d="M99 112 C84 104 72 100 58 82 M99 96 C116 88 128 78 140 64 M98 70 C86 62 78 52 70 34 M98 60 C108 52 114 42 118 26 M99 104 C118 104 132 106 146 112" />
          <path
            className={styles["leafBlade"]}
            d="M58 82 C44 84 34 76 28 66 C42 62 54 68 58 82 Z M58 82 L36 69"
          />
          <path className={styles["leafBlade"]} d="M70 34 C58 36 50 28 48 18 C60 18 68 24 70 34 Z" />
          <path className={styles["leafBlade"]} d="M118 26 C128 28 138 20 140 10 C128 8 120 16 118 26 Z" />
          <path className={styles["leafBlade"]} d="M140 64 C152 72 166 68 176 58 C164 48 148 50 140 64 Z" />
          <path className={styles["veins"]} d="M144 63 L170 59 M150 57 l4 6 M158 55 l3 6 M152 67 l4 -6" />
          <path className={styles["leafBlade"]} d="M98 44 C90 36 92 24 98 18 C106 24 106 36 98 44 Z" />
          <path
            className={styles["fruit"]}
            d="M146 112 v6 M141 118 h10 M142 118 C138 132 140 144 148 150 C152 142 154 130 150 118"
          />
        </svg>
        {PLACES.map((place) => (
          <label
            key={place}
            className={styles["mark"]}
            style={{ "--across": `${MARKS[place].x}%`, "--down": `${MARKS[place].y}%` } as CSSProperties}
          >
            <input type="radio" name={name} checked={place === where} onChange={() => onChoose(place)} />
            <span>{words.places[place]}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
