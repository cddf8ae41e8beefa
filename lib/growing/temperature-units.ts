/** Degrees Fahrenheit to degrees Celsius, exact. */
export function fahrenheitToCelsius(fahrenheit: number): number {
  return ((fahrenheit - 32) * 5) / 9;
}

/** Degrees Celsius to degrees Fahrenheit, exact. */
export function celsiusToFahrenheit(celsius: number): number {
  return (celsius * 9) / 5 + 32;
}
