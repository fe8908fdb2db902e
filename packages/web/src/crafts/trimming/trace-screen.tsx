import type { Json } from "@sillwood/bench/book";
import {
  branches_n,
  isEnough,
  lineInSide,
  nudged,
  phaseOf,
  placedPoint,
  START,
  type Tap,
  takenBack,
  tapped,
  tracedOf,
  withPhoto,
} from "@sillwood/bench/crafts/trimming/tracing";
import { useState } from "react";
import { useLocation, useParams } from "wouter";
import { takePicture } from "../../device/photo.ts";
import { useEngine } from "../../engine/use-ask.ts";
import { Choices } from "../../pages/fields/choices.tsx";
import pages from "../../pages/pages.module.css";
import { FilePicker } from "../../pages/read-list/file-picker.tsx";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Frame } from "../../shell/frame.tsx";
import { useKeys } from "../../shell/keyboard.ts";
import { write } from "../../shell/last-line.ts";
import { useSay } from "../../shell/say.ts";
import { TracePhotoView } from "./trace-photo-view.tsx";
import styles from "./trim.module.css";
import { useTrim, useTrimWords } from "./use-trim.ts";

/** Tracing over two photos, a quarter turn apart: taps only; the second photo shows the line of equal height. */
export function TraceScreen() {
  const { plant = "" } = useParams<{ plant: string }>();
  const all = useTrimWords();
  const words = all.trace;
  const engine = useEngine();
  const say = useSay();
  const [, go] = useLocation();
  const { page } = useTrim({ plant });
  const [tracing, setTracing] = useState(START);
  const [failed, setFailed] = useState(false);
  const phase = phaseOf(tracing);
  const which = phase === "base in side" || phase === "joint in side" ? "side" : "front";
  const shown = which === "side" ? tracing.side : tracing.front;
  const last = placedPoint(tracing);
  const nudge = (dx: number, dy: number) => setTracing(nudged(tracing, dx, dy));
  useKeys({
    arrowleft: () => nudge(-1, 0),
    arrowright: () => nudge(1, 0),
    arrowup: () => nudge(0, -1),
    arrowdown: () => nudge(0, 1),
  });
  const take = async (file: File) => {
    setFailed(false);
    try {
      const picture = await takePicture(file);
      await engine.keepFile(picture.sha256, picture.type, picture.bytes);
      const { sha256, width_px, height_px } = picture;
      setTracing((was) => withPhoto(was, { photo: sha256, width_px, height_px }));
    } catch {
      setFailed(true);
    }
  };
  const save = async () => {
    if (!isEnough(tracing)) return;
    const data = tracedOf(tracing) as unknown as Json;
    const files = [tracing.front, tracing.side].flatMap((photo) => (photo ? [photo.photo] : []));
    const written = await write(engine, [{ kind: "trimming.traced", on: [plant], data, files }]);
    if ("kept" in written) go(`/craft/trim/${plant}`);
  };
  const asks = {
    "front photo": words.frontPhoto,
    "side photo": words.sidePhoto,
    card: words.card,
    base: words.base,
    "base in side": words.baseSide,
    joint: words.joint,
    "joint in side": words.jointSide,
  }[phase];
  const isPhoto = phase === "front photo" || phase === "side photo";
  const residual = tracing.trouble && say.number(Math.abs(tracing.trouble.residual_mm), 0);
  const isWrong = tracing.trouble?.verdict === "wrong";
  return (
    <Frame
      where={words.title(page?.plant?.number ?? "")}
      beside={words.sofar(tracing.joints.length, branches_n(tracing))}
      keys={
        isPhoto ? (
          <FilePicker said={asks} accept="image/*" camera onFile={(file) => void take(file)} />
        ) : (
          <>
            <KeyRow>
              {isWrong ? (
                <>
                  <Key onPress={() => setTracing(takenBack(tracing))}>{words.again}</Key>
                  <Key onPress={() => setTracing(takenBack(takenBack(tracing)))}>{words.leaveOut}</Key>
                </>
              ) : (
                <Key onPress={() => setTracing(takenBack(tracing))}>{words.undo}</Key>
              )}
            </KeyRow>
            <Key main shut={!isEnough(tracing) || isWrong} onPress={() => void save()}>
              {isEnough(tracing) ? words.save(tracing.joints.length) : words.more}
            </Key>
          </>
        )
      }
    >
      <p className={pages["lead"]} role="status">
        <strong>{asks}</strong>
      </p>
      {failed && <p role="alert">{words.failed}</p>}
      {tracing.snapped !== undefined && <p>{words.snapped(tracing.snapped)}</p>}
      {residual !== undefined && (
        <p role="alert">{isWrong ? words.disagree(residual) : words.doubtful(residual)}</p>
      )}
      {shown && !isPhoto && (
        <TracePhotoView
          photo={shown}
          which={which}
          joints={tracing.joints}
          from={tracing.from}
          card={which === "front" ? tracing.card : []}
          pending={which === "front" ? tracing.pending : undefined}
          line={which === "side" ? lineInSide(tracing) : []}
          loupe={last && last.in === which ? last.at : undefined}
          onTap={(tap: Tap) => setTracing(tapped(tracing, tap))}
        />
      )}
      {phase === "card" && (
        <>
          <p>{words.cardSize(say.length(tracing.card_mm / 10))}</p>
          <KeyRow>
            <Key onPress={() => setTracing({ ...tracing, card_mm: Math.max(10, tracing.card_mm - 5) })}>
              {words.smaller}
            </Key>
            <Key onPress={() => setTracing({ ...tracing, card_mm: Math.min(300, tracing.card_mm + 5) })}>
              {words.larger}
            </Key>
          </KeyRow>
          <p className={styles["note"]}>{words.focal}</p>
        </>
      )}
      {(phase === "base" || phase === "base in side") && (
        <>
          <p>{words.caliper(say.thickness(tracing.trunk_mm))}</p>
          <KeyRow>
            <Key onPress={() => setTracing({ ...tracing, trunk_mm: Math.max(1, tracing.trunk_mm - 1) })}>
              {words.thinner}
            </Key>
            <Key onPress={() => setTracing({ ...tracing, trunk_mm: Math.min(80, tracing.trunk_mm + 1) })}>
              {words.thicker}
            </Key>
          </KeyRow>
        </>
      )}
      {(phase === "joint" || phase === "joint in side") && (
        <Choices
          legend={words.leaves}
          options={[
            { value: "0", said: words.none },
            { value: "1", said: "1" },
            { value: "2", said: "2" },
            { value: "3", said: "3" },
          ]}
          value={String(tracing.leaves_n)}
          onChoose={(leaves) => setTracing({ ...tracing, leaves_n: Number(leaves) })}
        />
      )}
      {!isPhoto && <p className={styles["note"]}>{words.nudge}</p>}
      {isEnough(tracing) && <p>{words.enough}</p>}
    </Frame>
  );
}
