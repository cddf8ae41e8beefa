# Rscript mixed-models.R FOLDER: times lme4 with default controls on the models listed in FOLDER/models.txt (name, tab,
# formula; data in FOLDER/name.csv). Prints R's and lme4's version, then name, median seconds, -2 log-likelihood.
suppressMessages(library(lme4))
folder <- commandArgs(trailingOnly = TRUE)[1]
models <- read.delim(file.path(folder, "models.txt"), header = FALSE, quote = "", col.names = c("name", "formula"))
seconds <- function(fit) {
  fit()
  first <- system.time(fit())[["elapsed"]]
  repeats <- if (first < 0.05) 20 else 1
  median(replicate(5, system.time(for (i in seq_len(repeats)) fit())[["elapsed"]] / repeats))
}
cat(R.version.string, as.character(packageVersion("lme4")), sep = "\t")
cat("\n")
for (row in seq_len(nrow(models))) {
  data <- read.csv(file.path(folder, paste0(models$name[row], ".csv")))
  for (column in intersect(names(data), c("period", "herd", "obs", "Subject", "Batch", "plate", "sample", "batch", "cask", "site", "lot", "method"))) {
    data[[column]] <- factor(data[[column]])
  }
  formula <- as.formula(models$formula[row])
  binomial_model <- grepl("^cbind", models$formula[row])
  fit <- function() suppressWarnings(suppressMessages(
    if (binomial_model) glmer(formula, data, family = binomial) else lmer(formula, data)
  ))
  value <- if (binomial_model) -2 * as.numeric(logLik(fit())) else REMLcrit(fit())
  cat(models$name[row], format(seconds(fit), digits = 8), format(value, digits = 16), sep = "\t")
  cat("\n")
}
