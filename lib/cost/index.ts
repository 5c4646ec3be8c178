export { basketAt, betterBasket } from "./basket.ts";
export { itemKey } from "./item-key.ts";
export { mergeNeeds } from "./merge-needs.ts";
export type { BedShare, CountNeed, FloorNeed, LiningNeed, Need, VolumeNeed } from "./need.ts";
export { indexPrices, type PriceIndex } from "./price-index.ts";
export type {
  BoardPrice,
  GoodsPrice,
  GoodsSize,
  KitPrice,
  PriceForm,
  PriceLine,
  SheetPrice,
} from "./price-line.ts";
export { cheapestPurchase, type Purchase, type PurchasePart } from "./purchase.ts";
export type { Bought, ReceiptLine, SizeShown, YardReceipt } from "./receipt.ts";
export { type SalesTaxOptions, salesTax } from "./sales-tax.ts";
export { shareOut } from "./share-out.ts";
export { type BedCost, shareReceipts } from "./share-receipts.ts";
export type { Basket, BoughtBoards, NotSold, Shopping } from "./shopping.ts";
export { sizesNeeded } from "./sizes-needed.ts";
export { type YardReceiptOptions, yardReceipt } from "./yard-receipt.ts";
export type { YardTerms } from "./yard-terms.ts";
