export { DEVICE_CLOSED, DEVICE_PAIRED, peopleKinds, type Role, roles } from "./kinds.ts";
