# Two factors of two levels each, effect coded: what tests/reference/stats/19_two_factors.json holds.
# Rscript 19_two_factors.R
options(digits = 17)
tooth <- subset(ToothGrowth, dose < 2)
tooth$b <- ifelse(tooth$supp == "OJ", 0.5, -0.5)
tooth$f <- ifelse(tooth$dose == 1, 0.5, -0.5)
print(coef(summary(lm(len ~ b * f, data = tooth))))
print(coef(summary(lm(len ~ b * f, data = tooth[-c(1, 2, 3, 15, 36), ]))))
breaks <- subset(warpbreaks, tension != "M")
breaks$b <- ifelse(breaks$wool == "B", 0.5, -0.5)
breaks$f <- ifelse(breaks$tension == "H", 0.5, -0.5)
print(coef(summary(lm(breaks ~ b * f, data = breaks))))
