import { useCallback, useEffect, useMemo, useState } from "react";
import {
  type Card,
  type HouseCalls,
  houseCalls,
  type PairedDevice,
  type Waiting,
} from "../../device/house-calls.ts";
import { useRevision } from "../../engine/use-ask.ts";

export interface Seen {
  readonly devices: readonly PairedDevice[];
  /** Where phones come in; undefined while no door is open to them. */
  readonly address?: string;
  readonly waiting: readonly Waiting[];
  readonly cards: ReadonlyMap<string, Partial<Card>>;
}
export interface HouseSeen {
  readonly calls: HouseCalls;
  readonly seen: Seen | undefined;
  /** No answer: there is no line, or this device may not ask. */
  readonly silent: boolean;
  look(): Promise<void>;
}

/** What the server knows of people and devices, looked at again whenever the book changes. */
export function useHouse(): HouseSeen {
  const calls = useMemo(() => houseCalls(new URL(".", location.href).href.replace(/\/$/, "")), []);
  const revision = useRevision();
  const [seen, setSeen] = useState<Seen>();
  const [silent, setSilent] = useState(false);
  const look = useCallback(async () => {
    try {
      const [{ devices, address }, waiting, cards] = await Promise.all([
        calls.devices(),
        calls.waiting(),
        calls.cards(),
      ]);
      const byPerson = new Map(cards.map(({ id, ...card }) => [id, card]));
      setSeen({ devices, waiting, cards: byPerson, ...(address === undefined ? {} : { address }) });
      setSilent(false);
    } catch {
      setSilent(true);
    }
  }, [calls]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a changed book may hold a new phone
  useEffect(() => void look(), [look, revision]);
  return { calls, seen, silent, look };
}
