/**
 * Alphabetic codes of ISO 4217 for money in circulation; funds and metals are left out.
 */
export const currencyCodes: readonly string[] = Object.freeze(
  (
    "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BGN BHD BIF BMD BND BOB BRL BSD BTN BWP BYN " +
    "BZD CAD CDF CHF CLP CNY COP CRC CUP CVE CZK DJF DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL " +
    "GHS GIP GMD GNF GTQ GYD HKD HNL HTG HUF IDR ILS INR IQD IRR ISK JMD JOD JPY KES KGS KHR KMF " +
    "KPW KRW KWD KYD KZT LAK LBP LKR LRD LSL LYD MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN " +
    "MYR MZN NAD NGN NIO NOK NPR NZD OMR PAB PEN PGK PHP PKR PLN PYG QAR RON RSD RUB RWF SAR SBD " +
    "SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TND TOP TRY TTD TWD TZS UAH " +
    "UGX USD UYU UZS VES VND VUV WST XAF XCD XOF XPF YER ZAR ZMW"
  ).split(" "),
);

const known = new Set(currencyCodes);
const withoutMinorUnit = new Set(
  "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF".split(" "),
);
const withThreeDecimals = new Set("BHD IQD JOD KWD LYD OMR TND".split(" "));

/** Signs that stand for one currency here; others are written with their code. */
export const currencySigns: Readonly<Record<string, string>> = Object.freeze({
  $: "USD",
  "€": "EUR",
  "£": "GBP",
});

/** The sign of a currency, or undefined for one that is written with its code. */
export function signOf(currency: string): string | undefined {
  return Object.keys(currencySigns).find((sign) => currencySigns[sign] === currency);
}

/**
 * Whether a text is an ISO 4217 code known here, in capitals.
 *
 * @rule the code is on the standard's list
 * @source iso-4217
 * @example
 * isCurrencyCode("EUR") // => true
 */
export function isCurrencyCode(text: string): boolean {
  return known.has(text);
}

/**
 * Decimals of a currency's minor unit by ISO 4217: 2 for most, 0 for the yen, 3 for the Kuwaiti
 * dinar; 2 for money without a currency.
 *
 * @rule decimals of the minor unit as the standard lists them
 * @source iso-4217
 * @example
 * minorDigits("JPY") // => 0
 */
export function minorDigits(currency?: string): 0 | 2 | 3 {
  if (currency === undefined) return 2;
  if (withoutMinorUnit.has(currency)) return 0;
  return withThreeDecimals.has(currency) ? 3 : 2;
}
