import { DEVICE_PAIRED } from "@sillwood/bench/people";
import type { Draft } from "@sillwood/bench/round";
import type { PairWish, Server } from "../device/server.ts";
import type { Identity, ReplyOf } from "./messages.ts";

/** The server knows a device by the same id as another person's. */
const DEVICE_TAKEN = 409;

interface PairTools {
  readonly server: Server;
  newDevice(): string;
  /** Makes the device this person's, brings the book here, and says whether it knows anybody. */
  become(identity: Identity): Promise<{ readonly hasPeople: boolean }>;
  write(drafts: readonly Draft[]): Promise<unknown>;
}

/** Lets this device in by a code. A name of its own that is another person's is left behind: the phone is somebody else's now. */
export async function pairDevice(
  { server, newDevice, become, write }: PairTools,
  wish: PairWish,
): Promise<ReplyOf["pair"]> {
  let { device } = wish;
  let answer = await server.pair(wish);
  if ("refused" in answer && answer.refused === DEVICE_TAKEN) {
    device = newDevice();
    answer = await server.pair({ ...wish, device });
  }
  if ("refused" in answer) return answer;
  const { person, role } = answer;
  const identity: Identity = { device, person, role, paired: true, card: wish.name };
  const { hasPeople } = await become(identity);
  if (role === "grower" && !hasPeople) await write([{ kind: "person.joined", on: [person], data: { role } }]);
  if (role !== "viewer") await write([{ kind: DEVICE_PAIRED, on: [device], data: { name: wish.name } }]);
  return { identity };
}
