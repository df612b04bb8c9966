#pragma once

#include <string>

namespace benchleaf::command {

/// The completion of bash: commands, options, their words, folders and files, calculators and their inputs, rules, kinds.
std::string bash_completion();
/// The same for zsh, with what each does.
std::string zsh_completion();

}  // namespace benchleaf::command
