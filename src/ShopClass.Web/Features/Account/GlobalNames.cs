// The folder and the stored class share the word "Account"; on pages the person behind it is the instructor.
global using Instructor = ShopClass.Data.Store.Account;
