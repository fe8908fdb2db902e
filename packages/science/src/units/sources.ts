import { citations } from "../citations.ts";

export const sources = { NISTSP811: citations.NISTSP811, FAO56: citations.FAO56 } as const;
