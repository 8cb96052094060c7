#include "application.hpp"

int main(int argc, char** argv) { return gritwright::desktop::run_desktop(argc, argv); }
