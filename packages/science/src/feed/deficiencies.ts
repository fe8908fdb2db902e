/** Where on a plant a lack or an excess shows first. */
export type SignPlace = "old leaves" | "new leaves" | "whole" | "fruit";

/** A lack, an excess, or what is mistaken for one; and the one check that tells each from what it is mistaken for. */
export type NutritionSign = {
  readonly key:
    | "nitrogen"
    | "magnesium"
    | "potassium"
    | "salt"
    | "phosphorus"
    | "iron"
    | "sulphur"
    | "boron"
    | "blossom end"
    | "ammonium"
    | "too much nitrogen";
  readonly where: SignPlace;
  /** signs drawn on the what-is-wrong desk that it explains, with how well, for ranking only */
  readonly explains: Readonly<Record<string, number>>;
  readonly mistakenFor: string;
};

/** Signs of nutrition on pepper. @source our assumption for the weights; signs common practice, no source */
export const nutritionSigns: readonly NutritionSign[] = [
  {
    key: "nitrogen",
    where: "old leaves",
    explains: { "old leaves yellow": 1, "small pale leaves": 0.6 },
    mistakenFor: "wet roots",
  },
  {
    key: "magnesium",
    where: "old leaves",
    explains: { "old leaves yellow between veins": 1 },
    mistakenFor: "too much potassium",
  },
  { key: "potassium", where: "old leaves", explains: { "leaf edges brown": 0.6 }, mistakenFor: "salt" },
  {
    key: "salt",
    where: "old leaves",
    explains: { "leaf edges brown": 0.8, "white crust": 1 },
    mistakenFor: "potassium",
  },
  { key: "phosphorus", where: "whole", explains: { "dark and purple": 0.7 }, mistakenFor: "cold roots" },
  {
    key: "iron",
    where: "new leaves",
    explains: { "new leaves yellow between veins": 1 },
    mistakenFor: "wet roots",
  },
  { key: "sulphur", where: "new leaves", explains: { "new leaves pale": 0.8 }, mistakenFor: "iron" },
  {
    key: "boron",
    where: "new leaves",
    explains: { "new leaves twisted": 0.4 },
    mistakenFor: "mites too small to see",
  },
  { key: "blossom end", where: "fruit", explains: { "sunken tan end": 1 }, mistakenFor: "sunscald" },
  {
    key: "ammonium",
    where: "whole",
    explains: { "new leaves yellow between veins": 0.4, "old leaves yellow between veins": 0.3 },
    mistakenFor: "iron",
  },
  {
    key: "too much nitrogen",
    where: "whole",
    explains: { "dark lush few flowers": 1 },
    mistakenFor: "too little light",
  },
];
